// The window on the drawing: it zooms about a place, and is moved by its own scroll bars, by dragging
// once it is zoomed, and by two fingers. A single finger scrolls the page where there is nothing left
// to scroll in the window, and so does the wheel.

import type { LitElement, ReactiveController } from 'lit';
import type { Place } from '../../plot/frame.ts';
import { MOST_ZOOM, type RunView, WHOLE_RUN, ZOOM_STEP, zoomedAbout } from '../../plot/run-zoom.ts';

/** A press that moves further is a drag, not a click [px]. */
const DRAG_FROM = 4;
/** One step of the wheel with the control key zooms so much [-]. */
const WHEEL_STEP = 0.0025;

export class RunWindow implements ReactiveController {
  readonly #host: LitElement;
  readonly #element: () => HTMLElement | null;
  #view: RunView = WHOLE_RUN;
  #printing: RunView | undefined;
  #drag: { readonly x: number; readonly y: number; moved: boolean } | undefined;
  #pinch: { readonly apart: number; readonly zoom: number } | undefined;

  /**
   * @param host - the drawing
   * @param element - finds the element that scrolls
   */
  constructor(host: LitElement, element: () => HTMLElement | null) {
    this.#host = host;
    this.#element = element;
    host.addController(this);
  }

  get zoom(): number {
    return this.#view.zoom;
  }

  get isWhole(): boolean {
    return this.#view.zoom === 1;
  }

  get isClosest(): boolean {
    return this.#view.zoom === MOST_ZOOM;
  }

  hostConnected(): void {
    addEventListener('beforeprint', this.#beforePrint);
    addEventListener('afterprint', this.#afterPrint);
  }

  hostDisconnected(): void {
    removeEventListener('beforeprint', this.#beforePrint);
    removeEventListener('afterprint', this.#afterPrint);
  }

  /**
   * Zooms in or out by a step.
   *
   * @param way - in or out
   * @param about - a place on the drawing that is to stay put, if it shows; else the middle does [px]
   */
  step(way: 'in' | 'out', about?: Place): void {
    const element = this.#element();
    if (!element) return;
    const { clientWidth, clientHeight, scrollLeft, scrollTop } = element;
    const middle = { x: clientWidth / 2, y: clientHeight / 2 };
    const place = about && { x: about.x - scrollLeft, y: about.y - scrollTop };
    const shows =
      place && place.x >= 0 && place.x <= clientWidth && place.y >= 0 && place.y <= clientHeight;
    this.#zoomAbout(this.zoom * (way === 'in' ? ZOOM_STEP : 1 / ZOOM_STEP), shows ? place : middle);
  }

  /** Shows the whole run. */
  showWhole(): void {
    this.#show(WHOLE_RUN);
  }

  /** Moves the drawing under the window by parts of the window's size. */
  pan(across: number, down: number): void {
    const element = this.#element();
    element?.scrollBy({
      left: across * element.clientWidth,
      top: down * element.clientHeight,
    });
  }

  /** Whether a press has turned into a drag, so that it selects nothing. */
  get isDragging(): boolean {
    return this.#drag?.moved ?? false;
  }

  readonly onPointerDown = (event: PointerEvent): void => {
    this.#drag = undefined;
    if (event.pointerType !== 'mouse' || event.button !== 0 || this.isWhole) return;
    this.#drag = { x: event.clientX, y: event.clientY, moved: false };
  };

  readonly onPointerMove = (event: PointerEvent): void => {
    const drag = this.#drag;
    const element = this.#element();
    if (!drag || !element || event.buttons !== 1) return;
    const across = event.clientX - drag.x;
    const down = event.clientY - drag.y;
    if (!drag.moved && Math.hypot(across, down) < DRAG_FROM) return;
    if (!drag.moved) element.setPointerCapture(event.pointerId);
    this.#drag = { x: event.clientX, y: event.clientY, moved: true };
    element.scrollBy({ left: -across, top: -down, behavior: 'instant' });
  };

  /** What was pressed is let go: the click that follows goes to the window, which captured it. */
  readonly onPointerUp = (): void => {
    this.#drag = undefined;
  };

  /** Zooms with the control key, as a pinch on a touch pad does; else the wheel scrolls. */
  readonly onWheel = {
    handleEvent: (event: WheelEvent): void => {
      if (!event.ctrlKey && !event.metaKey) return;
      event.preventDefault();
      this.#zoomAbout(this.zoom * Math.exp(-event.deltaY * WHEEL_STEP), this.#placeOf(event));
    },
    passive: false,
  };

  readonly onTouchStart = {
    handleEvent: (event: TouchEvent): void => {
      const fingers = twoFingers(event);
      this.#pinch = fingers && { apart: fingers.apart, zoom: this.zoom };
      if (fingers) event.preventDefault();
    },
    passive: false,
  };

  readonly onTouchMove = {
    handleEvent: (event: TouchEvent): void => {
      const fingers = twoFingers(event);
      if (!fingers || !this.#pinch) return;
      event.preventDefault();
      const zoom = (this.#pinch.zoom * fingers.apart) / this.#pinch.apart;
      this.#zoomAbout(zoom, this.#placeOf(fingers));
    },
    passive: false,
  };

  #placeOf({ clientX, clientY }: { readonly clientX: number; readonly clientY: number }): Place {
    const box = this.#element()?.getBoundingClientRect();
    return { x: clientX - (box?.left ?? 0), y: clientY - (box?.top ?? 0) };
  }

  #zoomAbout(zoom: number, place: Place): void {
    const element = this.#element();
    if (!element) return;
    const { scrollLeft, scrollTop } = element;
    this.#show(zoomedAbout({ zoom: this.zoom, left: scrollLeft, top: scrollTop }, zoom, place));
  }

  #show(view: RunView): void {
    this.#view = view;
    this.#host.requestUpdate();
    void this.#host.updateComplete.then(() => {
      this.#element()?.scrollTo({ left: view.left, top: view.top, behavior: 'instant' });
    });
  }

  readonly #beforePrint = (): void => {
    if (this.isWhole) return;
    this.#printing = this.#view;
    this.#view = WHOLE_RUN;
    this.#host.requestUpdate();
  };

  readonly #afterPrint = (): void => {
    if (this.#printing) this.#show(this.#printing);
    this.#printing = undefined;
  };
}

function twoFingers({ touches }: TouchEvent) {
  const [one, other] = touches;
  if (touches.length !== 2 || !one || !other) return undefined;
  return {
    apart: Math.max(1, Math.hypot(one.clientX - other.clientX, one.clientY - other.clientY)),
    clientX: (one.clientX + other.clientX) / 2,
    clientY: (one.clientY + other.clientY) / 2,
  };
}
