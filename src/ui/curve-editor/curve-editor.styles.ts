import { css } from 'lit';

export const curveEditorStyles = css`
  :host {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(22rem, 100%), 1fr));
    gap: 16px 32px;
    align-items: start;
    max-inline-size: 60rem;
    margin-block-start: 12px;
  }

  .meaning {
    display: grid;
    gap: 12px;
    max-inline-size: 26.25rem;
  }

  fieldset {
    margin: 0;
    padding: 0;
    border: 0;
  }

  legend {
    padding: 0;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
    line-height: 1.125rem;
  }

  fieldset label {
    display: flex;
    align-items: center;
    gap: 8px;
    min-block-size: 44px;
    cursor: pointer;
  }

  fieldset input {
    flex: none;
    inline-size: 1.125rem;
    block-size: 1.125rem;
    margin: 0;
    accent-color: var(--dc-ink);
  }
`;
