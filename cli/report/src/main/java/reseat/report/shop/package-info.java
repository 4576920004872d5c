/** Papers for the shop floor: drawings, setting, gauging, bonding, acceptance, upkeep. */
package reseat.report.shop;
