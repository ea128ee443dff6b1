import { css } from 'lit';

export const shopDeskStyles = css`
  :host {
    display: block;
    min-block-size: 100vh;
  }

  dc-notice-line,
  .sheet {
    display: block;
    max-inline-size: 102.5rem;
    margin-inline: auto;
    padding-inline: 32px;
  }

  .sheet {
    padding-block: 8px 48px;
  }

  :host([receiving]) {
    outline: 3px dashed var(--dc-air);
    outline-offset: -6px;
  }

  @media (max-width: 37.4375em) {
    dc-notice-line,
    .sheet {
      padding-inline: 16px;
    }
  }
`;
