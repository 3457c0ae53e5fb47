/** Remembers the answer of a pure function for each object it was asked about. */
export function once<K extends object, V>(compute: (key: K) => V): (key: K) => V {
  const answers = new WeakMap<K, V>();
  return (key) => {
    let answer = answers.get(key);
    if (answer === undefined) {
      answer = compute(key);
      answers.set(key, answer);
    }
    return answer;
  };
}
