/** What the parts of a bar mean, in words that follow it from top to bottom. */
export const GapBarLegend = () => (
  <dl className="gaps-legend">
    <div>
      <dt>Upper bar, plain</dt>
      <dd>how far the adjuster goes</dd>
    </div>
    <div>
      <dt>Lower bar, hatched</dt>
      <dd>where it may have to go for the exact gap, every error at its worst</dd>
    </div>
    <div>
      <dt>Lower bar, filled</dt>
      <dd>the same at three standard deviations, by root sum square</dd>
    </div>
    <div>
      <dt>Line with ends below</dt>
      <dd>
        what it must reach at worst to keep the gap within its limits; dashed: any setting on it will do
      </dd>
    </div>
    <div>
      <dt>Line with a wedge</dt>
      <dd>the target: where it stands when nothing is off</dd>
    </div>
  </dl>
);
