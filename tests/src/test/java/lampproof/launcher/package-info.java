/** The launcher and the scripts beside it, run by the shell on machines that have or lack what they look for. */
package lampproof.launcher;
