// The base of every event that an element of the page sends up: it bubbles and leaves shadow roots.

export class DcEvent extends Event {
  constructor(type: string) {
    super(type, { bubbles: true, composed: true });
  }
}
