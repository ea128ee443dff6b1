import { css } from 'lit';

export const curveShelfStyles = css`
  :host {
    display: block;
    max-inline-size: 60rem;
  }

  ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }

  li {
    padding-block: 4px;
    border-block-end: 1px solid var(--dc-rule);
  }

  .row,
  .all {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 12px;
  }

  .name {
    flex: 1 1 16rem;
    min-inline-size: 0;
  }

  .note {
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
  }

  h4 {
    margin: 12px 0 0;
    font-size: var(--dc-small);
    font-weight: 600;
  }

  .details {
    display: grid;
    gap: 8px;
    max-inline-size: 32rem;
    padding-block-end: 12px;
  }

  .files {
    position: relative;
    display: inline-flex;
    align-items: center;
    min-block-size: 44px;
    font-size: var(--dc-small);
    cursor: pointer;
  }

  .files > span {
    border-block-end: 1px solid var(--dc-rule-strong);
  }

  .files input {
    position: absolute;
    inset: 0;
    opacity: 0;
    inline-size: 100%;
    cursor: pointer;
  }

  .files:focus-within {
    outline: 2px solid var(--dc-focus);
    outline-offset: 2px;
  }
`;
