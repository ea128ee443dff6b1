import { css } from 'lit';

export const plotToolsStyles = css`
  :host {
    display: flex;
    flex-wrap: wrap;
    align-items: start;
    column-gap: 12px;
    min-inline-size: 0;
  }

  details {
    flex: 1;
    min-inline-size: 0;
  }

  details[open] {
    flex-basis: 100%;
    order: 1;
  }

  @media print {
    .save {
      display: none;
    }
  }
`;
