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
`;
