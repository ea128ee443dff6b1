import { css } from 'lit';

export const curveEditorStyles = css`
  :host {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 16px 32px;
    align-items: start;
    max-inline-size: 70rem;
    margin-block-start: 12px;
    container-type: inline-size;
  }

  .plot {
    min-inline-size: 0;
  }

  .gap {
    max-inline-size: 62ch;
    min-block-size: 2.5rem;
    margin: 0;
    font-size: var(--dc-small);
    line-height: 1.25rem;
  }

  .meaning {
    display: grid;
    gap: 12px;
    max-inline-size: 32.5rem;
  }

  .entries {
    display: grid;
    gap: 16px 32px;
    align-items: start;
  }

  @container (min-width: 47.5em) {
    .entries {
      grid-template-columns: minmax(0, 25rem) minmax(0, 32.5rem);
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
