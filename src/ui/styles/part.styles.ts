// A part of the page with a picture: its heading, what it comes to in words, and what is beside it.

import { css } from 'lit';

export const partStyles = css`
  :host {
    display: block;
    min-inline-size: 0;
  }

  header {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    justify-content: space-between;
    gap: 0 24px;
    min-block-size: 44px;
  }

  h2 {
    margin: 0;
    font-size: 1.25rem;
    font-weight: 600;
    line-height: 1.75rem;
  }

  .picture {
    display: flow-root;
  }

  .words {
    max-inline-size: 62ch;
    min-block-size: 3rem;
    margin: 4px 0 8px;
    line-height: 1.5rem;
    text-wrap: pretty;
  }

  /* A heading stays with its picture. */
  @media print {
    section,
    .words {
      break-inside: avoid;
    }

    header,
    .words {
      break-after: avoid;
    }
  }
`;
