/**
 * Rules on the program as a whole: the arrows between the packages, what each may touch, what the command line reaches, and
 * what every source must say.
 */
package lampproof.architecture;
