import { css } from 'lit';

/** The columns of a row where there is room for a line of them; the list's head has the same. */
export const dropColumns = css`
  minmax(112px, 1fr) 112px 92px 96px minmax(140px, 1.3fr) 156px
`;

export const dropRowStyles = css`
  :host {
    display: grid;
    grid-template-columns: ${dropColumns};
    grid-template-areas: 'name gate buttons flow speed verdict';
    column-gap: 12px;
    align-items: center;
    min-block-size: 56px;
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
    line-height: 20px;
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
    line-height: 17px;
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
    line-height: 18px;
  }

  .figure {
    margin: 0;
    min-block-size: 20px;
    line-height: 20px;
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
    block-size: 17px;
    white-space: nowrap;
  }

  .moving {
    display: inline-block;
    contain: size layout style;
    inline-size: 2.9em;
    block-size: 17px;
    vertical-align: bottom;
    text-align: end;
  }

  @container (min-width: 720px) {
    .figure {
      contain: size layout style;
      block-size: 20px;
    }
  }

  @media print {
    .buttons {
      visibility: hidden;
    }
  }

  @container (max-width: 719px) {
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
      inline-size: 100px;
    }

    dc-speed-scale {
      flex: 1;
    }
  }
`;
