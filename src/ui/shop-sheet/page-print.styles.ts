// How the page itself steps back for the sheet: on paper there is nothing but the sheet; on the screen
// the sheet is laid out where nobody sees or hears it.

import { css } from 'lit';

export const pagePrintStyles = css`
  @page {
    margin: 12mm;

    @bottom-left {
      content: var(--dc-sheet-foot, '');
      font: 8pt system-ui, sans-serif;
    }

    @bottom-right {
      content: counter(page) ' / ' counter(pages);
      font: 8pt system-ui, sans-serif;
    }
  }

  @media screen {
    body > dc-shop-sheet {
      position: fixed;
      inset-block-start: 0;
      inset-inline-start: -4000px;
      visibility: hidden;
    }
  }

  @media print {
    html {
      background: none;
    }

    body:has(> dc-shop-sheet) > :not(dc-shop-sheet) {
      display: none;
    }
  }
`;
