// Panels of fields below the pictures: groups under small headings, fields side by side as there is
// room.

import { css } from 'lit';

export const panelFormStyles = css`
  :host {
    --dc-sticky: 120px;

    display: block;
    min-inline-size: 0;
  }

  .group {
    padding-block: 12px 16px;
    border-block-end: 1px solid var(--dc-rule);
  }

  .group:last-child {
    border: 0;
    padding-block-end: 0;
  }

  h3 {
    margin: 0 0 4px;
    font-size: var(--dc-text);
    font-weight: 600;
    line-height: 1.75rem;
  }

  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 13.75rem), 1fr));
    gap: 12px 24px;
    align-items: start;
    max-inline-size: 75rem;
  }

  .long {
    grid-column: 1 / -1;
    max-inline-size: 29rem;
  }

  .about {
    max-inline-size: 90ch;
    margin: 0 0 8px;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
    line-height: 1.125rem;
  }

  button {
    margin-inline-start: -6px;
  }
`;
