import { css } from 'lit';
import { dropColumns, printedDropColumns } from '../drop-row/drop-row.styles.ts';

export const dropListStyles = css`
  :host {
    display: block;
    container-type: inline-size;
  }

  ul {
    margin: 0;
    padding: 0;
    list-style: none;
    border-block-end: 1px solid var(--dc-rule);
  }

  .head {
    display: grid;
    grid-template-columns: ${dropColumns};
    column-gap: 12px;
    padding-block: 0 4px;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
  }

  .head .end {
    text-align: end;
  }

  .head i {
    display: inline-block;
    inline-size: 16px;
    block-size: 8px;
    margin-inline-start: 8px;
    border-inline: 1px solid var(--dc-ink-soft);
    background: var(--dc-range);
  }

  .head .speed {
    padding-inline-start: 12px;
  }

  @media screen {
    @container (max-width: 44.9375em) {
      .head {
        display: none;
      }
    }
  }

  @media print {
    .head {
      grid-template-columns: ${printedDropColumns};
    }

    .head .pressed {
      display: none;
    }
  }
`;
