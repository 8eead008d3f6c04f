/** Rules on the house as a whole: the arrows between the rooms, what each room may touch, and what every source must say. */
package lampproof.architecture;
