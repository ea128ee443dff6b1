// A page of its own beside the shop's: the list of shops, the start of a new one.

import { css } from 'lit';

export const sheetStyles = css`
  :host {
    display: block;
    max-inline-size: 60rem;
  }

  h1 {
    margin: 8px 0 4px;
    font-size: 1.75rem;
    font-weight: 500;
    line-height: 2.25rem;
    letter-spacing: -0.01em;
  }

  h1:focus-visible {
    outline: none;
  }

  p {
    max-inline-size: 72ch;
    margin: 0 0 8px;
  }
`;
