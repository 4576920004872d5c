package reseat.plots.dxf;

import reseat.units.FilledText;

/** Group codes and values, two lines each, in the order written. Not for use by several threads. */
final class DxfPairs {

  private final StringBuilder out = new StringBuilder();

  void add(int code, String value) {
    out.append(FilledText.of("%3d", code)).append('\n').append(value).append('\n');
  }

  void addAll(DxfPairs others) {
    out.append(others.out);
  }

  String text() {
    return out.toString();
  }
}
