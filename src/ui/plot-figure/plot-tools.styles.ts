import { css } from 'lit';

export const plotToolsStyles = css`
  :host {
    display: block;
    container-type: inline-size;
    min-inline-size: 0;
  }

  .line {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    column-gap: 12px;
  }

  .fold {
    margin-inline-end: auto;
    padding-inline-start: 0;
  }

  /* For ears only, so it takes no part in the underlining of buttons. */
  .fold > span {
    border: 0;
  }

  .save {
    white-space: nowrap;
  }

  @media print {
    .line {
      display: none;
    }
  }
`;
