/** Lists of what the program knows: materials and check values. */
package reseat.report.catalog;
