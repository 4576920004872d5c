package reseat.plots.drawing;

import java.util.ArrayList;
import java.util.List;
import reseat.plots.dxf.DxfDrawing;
import reseat.plots.dxf.DxfLayer;
import reseat.plots.dxf.DxfMarks;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;

/** One view of a shop drawing: marks on layers, at one scale. Not for use by several threads. */
final class ShopView {

  private record OnLayer(DxfLayer layer, Mark mark) {}

  private final SheetView view;
  private final List<OnLayer> drawn = new ArrayList<>();

  ShopView(SheetView view) {
    this.view = view;
  }

  SheetView view() {
    return view;
  }

  void add(DxfLayer layer, Mark mark) {
    drawn.add(new OnLayer(layer, mark));
  }

  void addAll(DxfLayer layer, List<? extends Mark> marks) {
    marks.forEach(m -> add(layer, m));
  }

  List<Mark> marks() {
    return drawn.stream().map(OnLayer::mark).toList();
  }

  /** Left and right ends of what is drawn, in metres from the view's origin. */
  double reach(boolean toRight) {
    double most = 0;
    for (OnLayer d : drawn) {
      double edge = toRight ? d.mark().box().right() : -d.mark().box().left();
      double from = toRight ? -view.origin().x() : view.origin().x();
      most = Math.max(most, (edge + from) / view.scale());
    }
    return most;
  }

  /** Lowest point of what is drawn, m, y upward from the view's origin. */
  double lowest() {
    double down = drawn.stream().mapToDouble(d -> d.mark().box().bottom()).max().orElse(0);
    return (view.origin().y() - down) / view.scale();
  }

  /** Puts all into a drawing in true size, the view's origin at a place, m. */
  void into(DxfDrawing drawing, Point at) {
    for (OnLayer d : drawn) {
      d.mark().paint(new DxfMarks(drawing, d.layer(), view.scale(), view.origin(), at));
    }
  }
}
