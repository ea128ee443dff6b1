import { css } from 'lit';

export const plotToolsStyles = css`
  :host {
    display: grid;
    grid-template-columns: auto minmax(0, 1fr);
    container-type: inline-size;
    min-inline-size: 0;
  }

  details {
    grid-area: 1 / 1 / 2 / 3;
    min-inline-size: 0;
  }

  .line {
    grid-area: 1 / 2;
    display: flex;
    flex-wrap: wrap;
    justify-content: end;
    align-self: start;
    column-gap: 12px;
    pointer-events: none;
  }

  .line > * {
    pointer-events: auto;
  }

  .save {
    white-space: nowrap;
  }

  @container (max-width: 27.5em) {
    details {
      grid-area: 2 / 1 / 3 / 3;
    }

    .line {
      grid-area: 1 / 1 / 2 / 3;
      justify-content: space-between;
    }

    .save {
      margin-inline-start: auto;
    }
  }

  @media print {
    .line {
      display: none;
    }
  }
`;
