/**
 * Moisture: what the air does to wood, and what readings on site say. To be completed.
 */
package floorcalc.moisture;
