// The stops of a view for the Tab key: what ought to be reached, in the order in which the page is read,
// and what has the focus now. All through shadow roots, and slotted content where its slot is.
import type { Page } from 'playwright-core';

export interface Stop {
  /** Place in the order of the page, from 0; -1 where nothing, or something unexpected, has the focus. */
  readonly place: number;
  /** For messages, and to know what keys ought to work it. */
  readonly role: string;
  readonly name: string;
  /** Part of the page that it belongs to. */
  readonly region: string;
  readonly box: StopBox;
  readonly regionBox: StopBox;
}

/** On the whole page, from its left and top [px]. */
export interface StopBox {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** How the stop that has the focus looks. */
export interface FocusLook {
  readonly place: number;
  /** Whether a style sheet draws an outline around it, or around the box that it is in. */
  readonly isOutlined: boolean;
  /** Whether its middle is in the window and nothing lies over it. */
  readonly isUncovered: boolean;
}

/**
 * Finds all stops, and puts the starting point of the Tab key before the first.
 *
 * @param page - a view of the page
 * @returns the stops that Tab should come to, in this order
 */
export function findStops(page: Page): Promise<Stop[]> {
  return page.evaluate(() => {
    const REGIONS =
      'header, dc-plot-panel, dc-plot-foot-panel, dc-drops-panel, dc-run-panel, dc-speeds-panel, dc-suction-panel, dc-run-part, dc-collector-part, dc-conditions-part, dc-assumptions-panel, dc-notice-line, dc-run-outline, dc-points-table, .meaning, .form, section';
    const TABBABLE =
      'button, input, select, textarea, summary, a[href], [tabindex]:not([tabindex="-1"])';

    const childrenOf = (element: Element): Element[] => {
      if (element instanceof HTMLSlotElement) {
        const assigned = element.assignedElements();
        return assigned.length > 0 ? assigned : [...element.children];
      }
      return [...(element.shadowRoot ?? element).children];
    };
    const flat = (element: Element): Element[] =>
      childrenOf(element).flatMap((child) => [child, ...flat(child)]);
    const ancestors = (element: Element): Element[] => {
      const root = element.getRootNode();
      const parent =
        element.assignedSlot ??
        element.parentElement ??
        (root instanceof ShadowRoot ? root.host : undefined);
      return parent ? [parent, ...ancestors(parent)] : [];
    };
    const isTabbable = (element: Element) =>
      element.matches(TABBABLE) &&
      element.getAttribute('tabindex') !== '-1' &&
      !element.matches(':disabled') &&
      element.checkVisibility({ visibilityProperty: true }) &&
      !(element instanceof HTMLInputElement && element.type === 'radio' && !element.checked);
    const boxOf = (element: Element) => {
      const { left, top, right, bottom } = element.getBoundingClientRect();
      return { left, top: top + scrollY, right, bottom: bottom + scrollY };
    };
    const words = (element: Element) => {
      const labels = 'labels' in element ? (element as HTMLInputElement).labels : null;
      const all = element.getAttribute('aria-label') ?? labels?.[0]?.textContent;
      return (all ?? element.textContent ?? '').replaceAll(/\s+/g, ' ').trim();
    };

    scrollTo(0, 0);
    document.body.tabIndex = -1;
    document.body.focus();
    document.body.removeAttribute('tabindex');
    const stops = flat(document.body).filter(isTabbable);
    (globalThis as unknown as { stops: Element[] }).stops = stops;
    return stops.map((element, place) => {
      const region = ancestors(element).find((each) => each.matches(REGIONS)) ?? document.body;
      return {
        place,
        role:
          element.getAttribute('role') ??
          (element instanceof HTMLInputElement ? element.type : element.localName),
        name: words(element),
        region: region.localName + region.className,
        box: boxOf(element),
        regionBox: boxOf(region),
      };
    });
  });
}

/** What has the focus, and whether that is to be seen. */
export function lookAtFocus(page: Page): Promise<FocusLook> {
  return page.evaluate(() => {
    const { stops } = globalThis as unknown as { stops: Element[] };
    const parentOf = (element: Element): Element | null => {
      const root = element.getRootNode();
      return (
        element.assignedSlot ??
        element.parentElement ??
        (root instanceof ShadowRoot ? root.host : null)
      );
    };
    let focused = document.activeElement;
    while (focused?.shadowRoot?.activeElement) focused = focused.shadowRoot.activeElement;
    const place = focused ? stops.indexOf(focused) : -1;
    if (!focused || place === -1) return { place: -1, isOutlined: false, isUncovered: false };

    let isOutlined = false;
    let around: Element | null = focused;
    for (let level = 0; level < 3 && around; level++) {
      const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(around);
      const isDrawn = outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
      if (isDrawn && !outlineColor.endsWith(', 0)')) isOutlined = true;
      around = parentOf(around);
    }

    const { left, top, width, height } = focused.getBoundingClientRect();
    const x = left + Math.min(width, innerWidth - left) / 2;
    const y = Math.max(top, 0) + (Math.min(top + height, innerHeight) - Math.max(top, 0)) / 2;
    let over = document.elementFromPoint(x, y);
    while (over?.shadowRoot) {
      const deeper: Element | null = over.shadowRoot.elementFromPoint(x, y);
      if (!deeper || deeper === over) break;
      over = deeper;
    }
    const related = (element: Element | null, other: Element): boolean =>
      element !== null && (element === other || related(parentOf(element), other));
    const isSmall = width <= 1;
    const isUncovered =
      isSmall || related(over, focused) || (over !== null && related(focused, over));
    return { place, isOutlined, isUncovered };
  });
}
