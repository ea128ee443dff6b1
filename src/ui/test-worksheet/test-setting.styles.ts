import { css } from 'lit';

export const testSettingStyles = css`
  section {
    padding-block: 8px;
    border-block-end: 1px solid var(--dc-rule);
  }

  header {
    display: flex;
    align-items: center;
    justify-content: space-between;
    gap: 16px;
  }

  .places {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(8.25rem, 1fr));
    gap: 8px 16px;
    align-items: end;
    max-inline-size: 60rem;
    margin: 8px 0 0;
    padding: 0;
    border: 0;
  }

  .places legend {
    padding: 0 0 4px;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
  }

  .result {
    margin: 8px 0 0;
    font-variant-numeric: tabular-nums;
  }

  .impossible {
    color: var(--dc-duct);
    font-weight: 600;
  }
`;
