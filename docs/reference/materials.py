"""Values of data sheets converted with the exact inch and pound; the limit of ISO 76."""

from fractions import Fraction

from table import Table

table = Table("Materials")
INCH, POUND = Fraction("0.0254"), Fraction("0.45359237")
PSI = POUND * Fraction("9.80665") / INCH**2
table.check("CV-092", "52100: Young's modulus", Fraction("29.5e6") * PSI / 10**9)
table.check("CV-093", "52100: density", Fraction("0.283") * POUND / INCH**3)
table.check("CV-094", "52100: tensile strength", 325000 * PSI / 10**6)
# printed in ISO 76: 4200 MPa, at which the set is a ten-thousandth of the ball's diameter
table.check("CV-095", "static limit of hardened steel", 4200)
table.check("CV-096", "12.7 mm ball: permanent set at that limit", 12700 * Fraction(1, 10**4))
table.finish()
