/** The commands for the shop's stock: list, reserve, use, and what can be done today. */
package reseat.stock.desk;
