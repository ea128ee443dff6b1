import { css } from 'lit';

export const runEditorStyles = css`
  :host {
    display: block;
    min-inline-size: 0;
  }

  .bar {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 16px;
    margin-inline-start: -6px;
  }

  .notice {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 8px;
    min-block-size: 44px;
    font-size: var(--dc-small);
  }

  h3 {
    margin: 0 0 4px;
    font-size: var(--dc-text);
    font-weight: 600;
    line-height: 1.5rem;
  }
`;
