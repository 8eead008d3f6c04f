/** Benchmarks: they measure speed, which no test does. The scripts in {@code tests/bench} run them. */
package lampproof.bench;
