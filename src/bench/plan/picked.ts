/** What is picked on the plan. */
export interface Picked {
  kind: 'strip' | 'patch' | 'flap' | 'part';
  id: string;
  /** Of a strip: which of its places, from 0; the whole strip where absent. */
  corner?: number;
}
