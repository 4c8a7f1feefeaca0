/** The sentence why it cannot be signed yet, or null. */
export function whyNotToSign(reviewed: {
  openCount: number;
  listening: { drawn: number; listened: number };
  asideListening: { drawn: number; listened: number };
}): string | null {
  if (reviewed.openCount > 0) {
    return `${reviewed.openCount} flagged ${reviewed.openCount === 1 ? 'item is' : 'items are'} still open: settle them first.`;
  }
  const left =
    reviewed.listening.drawn -
    reviewed.listening.listened +
    reviewed.asideListening.drawn -
    reviewed.asideListening.listened;
  if (left > 0) {
    return `${left} drawn ${left === 1 ? 'item has' : 'items have'} not been listened to yet: listen first.`;
  }
  return null;
}
