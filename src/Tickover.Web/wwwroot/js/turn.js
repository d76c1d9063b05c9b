// @ts-check
/** One tab sends at a time. */
import { newKey } from "./key.js";
import { lease, release } from "./store.js";

const lockName = "tickover-outbox";
const leaseMs = 15_000;
const renewMs = 5_000;
const holder = newKey();

/**
 * Does the work if no other tab is at it.
 * @param {() => Promise<void>} work
 * @returns {Promise<boolean>} false if another tab is at it
 */
export async function inTurn(work) {
  // navigator.locks is only there over TLS and on loopback.
  if ("locks" in navigator && navigator.locks) {
    return navigator.locks.request(lockName, { ifAvailable: true }, async (lock) => {
      if (lock !== null) {
        await work();
      }
      return lock !== null;
    });
  }
  if (!(await lease(holder, leaseMs))) {
    return false;
  }
  const renewal = setInterval(() => void lease(holder, leaseMs), renewMs);
  try {
    await work();
  } finally {
    clearInterval(renewal);
    await release(holder);
  }
  return true;
}
