import { css } from 'lit';

export const curveEditorStyles = css`
  :host {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 16px 32px;
    align-items: start;
    max-inline-size: 1120px;
    margin-block-start: 12px;
    container-type: inline-size;
  }

  .plot {
    min-inline-size: 0;
  }

  .gap {
    max-inline-size: 62ch;
    min-block-size: 40px;
    margin: 0;
    font-size: var(--dc-small);
    line-height: 20px;
  }

  .meaning {
    display: grid;
    gap: 12px;
    max-inline-size: 520px;
  }

  .entries {
    display: grid;
    gap: 16px 32px;
    align-items: start;
  }

  @container (min-width: 760px) {
    .entries {
      grid-template-columns: minmax(0, 400px) minmax(0, 520px);
    }
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
