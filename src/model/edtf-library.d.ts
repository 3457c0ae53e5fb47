declare module 'edtf' {
  /** Reads EDTF text; throws on text that is not EDTF. */
  export default function edtf(text: string): { type: string; min?: number | null; max?: number | null };
}
