/** The whole program as a process of its own, with the real simulator. */
package lampproof.endtoend;
