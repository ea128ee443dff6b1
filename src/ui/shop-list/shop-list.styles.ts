import { css } from 'lit';

export const shopListStyles = css`
  .actions {
    display: flex;
    flex-wrap: wrap;
    gap: 0 16px;
    margin-inline-start: -6px;
  }

  ul {
    margin: 8px 0 16px;
    padding: 0;
    border-block-end: 1px solid var(--dc-rule);
    list-style: none;
  }

  li {
    padding-block: 10px;
    border-block-start: 1px solid var(--dc-rule);
  }

  li[aria-current='true'] {
    border-block-start: 2px solid var(--dc-ink);
    padding-block-start: 9px;
  }

  dc-text-field {
    display: block;
    max-inline-size: 560px;
  }

  .about {
    margin: 4px 0 0;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
    line-height: 1.125rem;
  }

  .wrong {
    margin: 4px 0 0;
    padding-inline-start: 16px;
    font-size: var(--dc-small);
    line-height: 1.125rem;
  }

  .file {
    display: inline-block;
    min-block-size: 44px;
    padding: 0 6px;
    line-height: 2.75rem;
    font-size: var(--dc-small);
    cursor: pointer;
  }

  .file > span {
    padding-block-end: 2px;
    border-block-end: 1px solid var(--dc-rule-strong);
  }

  .file:hover > span {
    border-block-end-color: var(--dc-ink);
  }

  .file:has(:focus-visible) {
    outline: 2px solid var(--dc-focus);
    outline-offset: 2px;
  }

  summary {
    display: inline-flex;
    align-items: center;
    min-block-size: 44px;
    font-size: var(--dc-small);
    cursor: pointer;
    touch-action: manipulation;
  }

  summary::before {
    content: '';
    inline-size: 6px;
    block-size: 6px;
    margin-inline: 2px 10px;
    border: solid var(--dc-ink-soft);
    border-width: 0 1.5px 1.5px 0;
    rotate: -45deg;
  }

  a {
    color: var(--dc-air);
    text-underline-offset: 3px;
  }

  details[open] > summary::before {
    rotate: 45deg;
    translate: 0 -2px;
  }

`;
