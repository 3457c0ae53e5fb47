/** Answers that come late: only that to the newest question counts. */
export function newest<Question, Given>(
  ask: (question: Question) => Promise<Given>,
  take: (given: Given, question: Question) => void,
  fail: (error: unknown) => void,
): (question: Question) => Promise<void> {
  let turn = 0;
  return async (question) => {
    const mine = ++turn;
    try {
      const given = await ask(question);
      if (mine === turn) take(given, question);
    } catch (error) {
      if (mine === turn) fail(error);
    }
  };
}
