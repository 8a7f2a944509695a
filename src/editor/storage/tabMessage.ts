// What the tabs of one project say to each other.

export type TabMessage =
  | { readonly kind: "here"; readonly from: string; readonly isAnswer: boolean }
  | { readonly kind: "gone"; readonly from: string }
  | { readonly kind: "hand-over"; readonly from: string }
  | { readonly kind: "ready"; readonly to: string }
  | { readonly kind: "saved"; readonly from: string };

/** A channel that reaches the other tabs and not the sender. */
export interface Channel {
  readonly post: (message: TabMessage) => void;
  readonly close: () => void;
}
