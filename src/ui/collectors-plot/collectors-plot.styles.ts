import { css } from 'lit';

export const collectorsPlotStyles = css`
  .collector {
    fill: none;
    stroke: var(--dc-air);
    stroke-width: 1.5;
  }

  .collector.own {
    stroke-width: 2.25;
  }

  .collector.today {
    stroke-width: 3;
  }

  .doubt-flow {
    fill-opacity: 0.1;
  }

  .unknown {
    fill: none;
    stroke: var(--dc-air);
    stroke-width: 1.5;
    stroke-dasharray: 0.1 5;
    stroke-linecap: round;
  }

  .system {
    fill: none;
    stroke: var(--dc-duct);
    stroke-width: 2.25;
  }

  .point {
    fill: var(--dc-ink);
    stroke: var(--dc-paper);
    stroke-width: 2;
    paint-order: stroke;
  }

  /* Hollow, as entered points are: what is invented is not to be mistaken for one's own. */
  .point.example {
    fill: var(--dc-paper);
    stroke: var(--dc-ink);
    stroke-width: 1.75;
  }

  .leader {
    stroke: var(--dc-ink-soft);
    stroke-width: 0.75;
  }

  .name {
    dominant-baseline: central;
    fill: var(--dc-ink);
  }

  .ducts {
    fill: var(--dc-duct);
  }
`;
