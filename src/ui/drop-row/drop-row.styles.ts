import { css } from 'lit';

/** The columns of a row where there is room for a line of them; the list's head has the same. */
export const dropColumns = css`
  minmax(7rem, 1fr) 112px 5.75rem 6rem minmax(8.75rem, 1.3fr) 9.75rem
`;

export const printedDropColumns = css`
  minmax(7rem, 1fr) 112px 6rem minmax(8rem, 1.3fr) 9.75rem
`;

export const dropRowStyles = css`
  :host {
    display: grid;
    grid-template-columns: ${dropColumns};
    grid-template-areas: 'name gate buttons flow speed verdict';
    column-gap: 12px;
    align-items: center;
    min-block-size: 3.5rem;
    padding-block: 1px;
    border-block-start: 1px solid var(--dc-rule);
  }

  .name {
    grid-area: name;
  }

  h3 {
    margin: 0;
    font-size: var(--dc-text);
    font-weight: 600;
    line-height: 1.25rem;
    overflow-wrap: anywhere;
  }

  .shut h3,
  h3.shut {
    font-weight: 400;
  }

  .note {
    margin: 0;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
    line-height: 1.0625rem;
  }

  .gate {
    grid-area: gate;
  }

  .buttons {
    grid-area: buttons;
    display: flex;
    gap: 4px;
  }

  .flow {
    grid-area: flow;
    text-align: end;
  }

  .speed {
    grid-area: speed;
    padding-inline-start: 12px;
  }

  .speed .number {
    display: inline-block;
    min-inline-size: 3.1em;
    text-align: end;
  }

  .verdict {
    grid-area: verdict;
    line-height: 1.125rem;
  }

  .figure {
    margin: 0;
    min-block-size: 1.25rem;
    line-height: 1.25rem;
  }

  .whole {
    white-space: nowrap;
    font-variant-numeric: tabular-nums;
  }

  .idle,
  .idle .number {
    color: var(--dc-ink-soft);
  }

  /* A number that changes lays out itself alone. */
  .travel {
    contain: size layout style;
    block-size: 1.0625rem;
    white-space: nowrap;
  }

  .moving {
    display: inline-block;
    contain: size layout style;
    inline-size: 2.9em;
    block-size: 1.0625rem;
    vertical-align: bottom;
    text-align: end;
  }

  @container (min-width: 45em) {
    .figure {
      contain: size layout style;
      block-size: 1.25rem;
    }
  }

  /* On paper a row is one line, without what can only be pressed. */
  @media print {
    :host {
      grid-template-columns: ${printedDropColumns};
      grid-template-areas: 'name gate flow speed verdict';
      break-inside: avoid;
    }

    .buttons {
      display: none;
    }
  }

  @media screen {
    @container (max-width: 44.9375em) {
      :host {
        grid-template-columns: 112px auto 1fr;
        grid-template-areas:
          'name name verdict'
          'gate buttons flow'
          'speed speed speed'
          'slowest slowest slowest';
        row-gap: 2px;
        padding-block: 10px;
      }

      .verdict {
        display: contents;
      }

      dc-verdict {
        grid-area: verdict;
        justify-self: end;
      }

      .slowest {
        grid-area: slowest;
      }

      .slowest::before {
        content: 'slowest: ';
      }

      .speed {
        display: flex;
        align-items: center;
        gap: 12px;
        padding: 0;
      }

      .speed .figure {
        flex: none;
        inline-size: 6.25rem;
      }

      dc-speed-scale {
        flex: 1;
      }
    }
  }
`;
