// Small signs of the view, drawn with the line of the plan.

export function GripSign() {
  return (
    <svg viewBox="0 0 10 16" width="10" height="16" aria-hidden="true" className="grip">
      {[3, 8, 13].flatMap((y) => [2.5, 7.5].map((x) => <circle key={`${x} ${y}`} cx={x} cy={y} r="1.15" />))}
    </svg>
  );
}

export function CopySign() {
  return (
    <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" className="icon">
      <path d="M5.5 5.5h8v8h-8zM10.5 5.5v-3h-8v8h3" />
    </svg>
  );
}

export function DeleteSign() {
  return (
    <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" className="icon">
      <path d="M3.8 3.8l8.4 8.4M12.2 3.8l-8.4 8.4" />
    </svg>
  );
}

/** Which way a column is sorted. */
export function SortSign({ isTurned }: { isTurned: boolean }) {
  return (
    <svg viewBox="0 0 8 8" width="8" height="8" aria-hidden="true" className="icon">
      <path d={isTurned ? "M1 5.5l3-3 3 3" : "M1 2.5l3 3 3-3"} />
    </svg>
  );
}

/** What the set may not use. */
export function ForbidSign() {
  return (
    <svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true" className="icon">
      <circle cx="7" cy="7" r="5.2" />
      <path d="M3.4 10.6l7.2-7.2" />
    </svg>
  );
}
