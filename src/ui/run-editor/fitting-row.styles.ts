import { css } from 'lit';

export const fittingRowStyles = css`
  fieldset {
    min-inline-size: 0;
    margin: 0;
    padding: 4px 0 8px;
    border: 0;
    border-block-start: 1px solid var(--dc-rule);
  }

  legend {
    float: inline-start;
    inline-size: 100%;
    padding: 0;
    font-size: var(--dc-small);
    line-height: 1.5rem;
  }

  .fields {
    clear: both;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 7rem), 1fr));
  }
`;
