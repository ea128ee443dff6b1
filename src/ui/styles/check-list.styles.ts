// A list of things to tick, in as many columns as there is room for.

import { css } from 'lit';

export const checkListStyles = css`
  fieldset {
    min-inline-size: 0;
    margin: 12px 0;
    padding: 0;
    border: 0;
  }

  legend {
    padding: 0;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
    line-height: 1.125rem;
  }

  .ticks {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 20rem), 1fr));
    gap: 0 24px;
  }

  .ticks label {
    display: flex;
    align-items: center;
    gap: 10px;
    min-block-size: 44px;
  }

  .ticks input {
    flex: none;
    inline-size: 20px;
    block-size: 20px;
    margin: 2px;
    accent-color: var(--dc-air);
  }

  .aside {
    display: inline-block;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
  }
`;
