// Takes a plot's picture off the page as plain nodes, with every colour and font that the page's
// style sheets give it written out as attributes, in the colours of paper.

import { paperPalette } from '../../plot/paper-palette.ts';
import type { PictureNode } from '../../plot/picture-text.ts';

/** Properties that are inherited, so they are written only where they change. */
const INHERITED = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-opacity',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'paint-order',
  'shape-rendering',
  'font-family',
  'font-size',
  'font-weight',
  'letter-spacing',
  'text-anchor',
  'dominant-baseline',
] as const;
/** Attributes that mean something to the page only. */
const LEFT_OUT = /^(?:class|style|role|tabindex|part|aria-.*|data-.*)$/;

/**
 * Takes the picture. The page's own colours are back before anything is painted.
 *
 * @param picture - the SVG element of a plot
 * @returns its content as one group
 */
export function pictureOf(picture: SVGSVGElement): PictureNode {
  for (const [name, value] of Object.entries(paperPalette)) {
    picture.style.setProperty(name, value);
  }
  try {
    const group = nodeOf(picture, undefined);
    return { ...group, name: 'g', attributes: withoutSize(group.attributes) };
  } finally {
    for (const name of Object.keys(paperPalette)) picture.style.removeProperty(name);
  }
}

function nodeOf(element: Element, parent: CSSStyleDeclaration | undefined): PictureNode {
  const style = getComputedStyle(element);
  const attributes: Record<string, string> = {};
  for (const { name, value } of element.attributes) {
    if (!LEFT_OUT.test(name)) attributes[name] = value;
  }
  for (const name of INHERITED) {
    const value = style.getPropertyValue(name);
    if (value !== '' && value !== parent?.getPropertyValue(name)) attributes[name] = value;
  }
  if (style.opacity !== '1') attributes['opacity'] = style.opacity;
  const children = [...element.childNodes].flatMap((child): (PictureNode | string)[] => {
    if (child instanceof Element) return isShown(child) ? [nodeOf(child, style)] : [];
    const text = child instanceof Text ? child.data : '';
    return text.trim() === '' && element.localName !== 'tspan' ? [] : [text];
  });
  return { name: element.localName, attributes, children };
}

/** What is only there to be pointed at is not part of the picture. */
function isShown(element: Element): boolean {
  if (element.localName === 'style' || element.getAttribute('role') === 'option') return false;
  const { display, visibility } = getComputedStyle(element);
  return display !== 'none' && visibility !== 'hidden';
}

function withoutSize(attributes: PictureNode['attributes']): PictureNode['attributes'] {
  const { width: _width, height: _height, viewBox: _viewBox, ...rest } = attributes;
  return rest;
}
