// The body of the pane, as high as it is given.

export function PaneBody({ height }: { height: number }) {
  return <div className="pane-body" style={{ height }} />;
}
