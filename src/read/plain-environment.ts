/** Runs `work` while the environment is a plain object that says the same, and puts the real one back.
 *
 * The parser of YAML asks the environment at every sign whether it should log; each such question goes to the operating
 * system, which is a fifth of reading a collection. What is set meanwhile is lost, so nothing but reading belongs in it. */
export function withPlainEnvironment<T>(work: () => T): T {
  const environment = process.env;
  process.env = { ...environment };
  try {
    return work();
  } finally {
    process.env = environment;
  }
}
