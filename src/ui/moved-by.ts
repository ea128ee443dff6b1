// Moves an element by a transform that changes from frame to frame: neither laid out anew, nor said in
// a style attribute, which the page's policy refuses.

import { noChange } from 'lit';
import { Directive, directive, type ElementPart } from 'lit/directive.js';

class MovedBy extends Directive {
  #transform: string | undefined;

  render(_transform: string): typeof noChange {
    return noChange;
  }

  override update(part: ElementPart, [transform]: [string]): typeof noChange {
    if (transform !== this.#transform) {
      (part.element as HTMLElement | SVGElement).style.transform = transform;
      this.#transform = transform;
    }
    return noChange;
  }
}

/** Takes a CSS transform; written where an element's attributes are. */
export const movedBy = directive(MovedBy);
