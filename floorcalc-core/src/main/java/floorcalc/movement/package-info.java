/**
 * Movement: how much boards swell and shrink, and whether the gap has room for it. To be completed.
 */
package floorcalc.movement;
