// The program behind the page: one way to ask it, and one way to ask again and again without a stale answer.

/** What went wrong, in the faults of the interface. */
export class Refused extends Error {
  constructor(status, answer) {
    super(answer.faults?.map((fault) => fault.right).join("; ") || answer.stops?.join("; ") || `status ${status}`);
    this.status = status;
    this.faults = answer.faults || [];
    this.stops = answer.stops || [];
    this.understood = answer.understood || {};
  }
}

/** The program cannot be reached. */
export class Gone extends Error {}

async function asked(path, options) {
  let response;
  try {
    response = await fetch(path, options);
  } catch {
    throw new Gone();
  }
  if (response.ok) return response;
  let answer;
  try {
    answer = await response.json();
  } catch {
    answer = { faults: [{ field: "", read: "", right: `the program answered with status ${response.status}` }] };
  }
  throw new Refused(response.status, answer);
}

const request = (body) => ({
  method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(body),
});

export const get = async (path) => (await asked(path, {})).json();
export const post = async (path, body) => (await asked(path, request(body))).json();
export const bytes = async (path, body) => (await asked(path, request(body))).blob();

/**
 * Asks whenever something has changed, one question at a time: while one is on its way the newest waits, and any
 * between are never asked. So answers come in the order of the questions, and the last one stands.
 */
export class Newest {
  #ask;
  #answered;
  #busy = false;
  #waiting = null;

  constructor(ask, answered) {
    this.#ask = ask;
    this.#answered = answered;
  }

  async change(question) {
    this.#waiting = { question };
    if (this.#busy) return;
    this.#busy = true;
    while (this.#waiting) {
      const { question: now } = this.#waiting;
      this.#waiting = null;
      let answer = null;
      let refused = null;
      try {
        answer = await this.#ask(now);
      } catch (error) {
        refused = error;
      }
      try {
        this.#answered({ question: now, answer, refused, newer: this.#waiting !== null });
      } catch (error) {
        console.error(error);
      }
    }
    this.#busy = false;
  }
}
