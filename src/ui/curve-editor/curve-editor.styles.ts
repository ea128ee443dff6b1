import { css } from 'lit';

export const curveEditorStyles = css`
  :host {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(280px, 100%), 1fr));
    gap: 16px 32px;
    align-items: start;
    max-inline-size: 960px;
    margin-block-start: 12px;
  }

  .meaning {
    display: grid;
    gap: 12px;
    max-inline-size: 420px;
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
    line-height: 18px;
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
    inline-size: 18px;
    block-size: 18px;
    margin: 0;
    accent-color: var(--dc-ink);
  }
`;
