import { NO_ANSWER } from './ask-host.ts';
import { HOST_KEY } from '../../shared/contract/host-key.ts';
import { hostKey } from './host-key.ts';

type Uploaded =
  | { readonly ok: true; readonly token: string }
  | { readonly ok: false; readonly reason: string };

/** Hands a file to the host, which knows it by a token from then on. */
export async function upload(file: File): Promise<Uploaded> {
  try {
    const response = await fetch(`/upload?name=${encodeURIComponent(file.name)}`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/octet-stream', [HOST_KEY]: hostKey() },
      body: await file.arrayBuffer(),
      cache: 'no-store',
    });
    if (!response.ok) return { ok: false, reason: (await response.text()).trim() };
    const { token }: { readonly token: string } = await response.json();
    return { ok: true, token };
  } catch (problem) {
    // A file that was changed or removed since it was chosen cannot be read.
    const gone = problem instanceof DOMException && problem.name === 'NotReadableError';
    return { ok: false, reason: gone ? `${file.name} cannot be read any more; choose it again` : NO_ANSWER };
  }
}
