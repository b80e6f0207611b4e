/** The commands about the shop's stock: look, reserve, take, and what can be done today. */
package reseat.stock.desk;
