/** Fetches what the host has made as a download of the browser. */
export function fetchDownload(address: string | undefined, name: string): void {
  if (address === undefined) return;
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
}
