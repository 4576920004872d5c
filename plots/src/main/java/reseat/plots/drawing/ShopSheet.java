package reseat.plots.drawing;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Support;
import reseat.making.MadeDimension;
import reseat.making.MadeFeature;
import reseat.making.MadeHalf;
import reseat.plots.dxf.DxfDrawing;
import reseat.plots.dxf.DxfLayer;
import reseat.plots.scene.Anchor;
import reseat.plots.scene.Box;
import reseat.plots.scene.Point;
import reseat.plots.scene.Scene;
import reseat.plots.scene.ScenePainter;
import reseat.plots.scene.SvgWriter;
import reseat.plots.scene.TextStyle;
import reseat.plots.scene.TextWidth;

/**
 * The drawing of one half: plan and sections to round scales, coordinates, sizes and a title field
 * on one sheet, A4 for millimetres, letter for inches; and plan and sections in true size as DXF.
 */
public final class ShopSheet {

  private static final double SECTIONS_SHARE = 0.42;
  private static final double TABLES_SHARE = 0.3;
  private static final double DXF_GAP = 0.02;

  /** Width of a line of words: a text of release 12 has at most 255 characters. */
  private static final double LINE = 800;

  private final ShopPaper paper;
  private final String title;
  private final String altText;
  private final Scene scene;
  private final byte[] dxf;

  private ShopSheet(ShopPaper paper, String title, String altText, Scene scene, byte[] dxf) {
    this.paper = paper;
    this.title = title;
    this.altText = altText;
    this.scene = scene;
    this.dxf = dxf;
  }

  /**
   * Draws one half.
   *
   * @param design the coupling
   * @param half the half that is made
   * @param stamp where the drawing comes from in two lines: file, date and digest; version of the
   *     program; and a third, set off, if there is something to warn of
   * @param inchFirst whether the user's unit is the inch
   * @return the drawing
   */
  public static ShopSheet of(
      CouplingDesign design, Half half, List<String> stamp, boolean inchFirst) {
    MadeHalf made = MadeHalf.of(design, half);
    ShopFigures figures = new ShopFigures(inchFirst);
    ShopPaper paper = inchFirst ? ShopPaper.LETTER : ShopPaper.A4;
    Box frame = paper.frame();
    List<Group> groups = groups(design, made);
    ShopTables tables = new ShopTables(made, figures, frame.width());
    Scene below = tables.draw(sizes(groups, made, figures), TABLES_SHARE * frame.height());
    double titleTop = frame.bottom() - ShopTitle.HEIGHT;
    double tablesTop = titleTop - below.height() - 4;
    Box views = new Box(frame.left() + 4, frame.top() + 6, frame.right() - 4, tablesTop - 4);
    double split = views.right() - SECTIONS_SHARE * views.width();
    ShopPlan.Drawn plan =
        ShopPlan.of(
            design, made, figures, new Box(views.left(), views.top(), split - 4, views.bottom()));
    List<ShopView> sections =
        sections(groups, made, figures, new Box(split, views.top(), views.right(), views.bottom()));
    ShopTitle heading = new ShopTitle(design, made, figures, plan.scale().words(), stamp);
    Scene.Builder scene = new Scene.Builder();
    scene.addAll(paper.frameMarks());
    scene.addAll(plan.view().marks());
    sections.forEach(s -> scene.addAll(s.marks()));
    // the corner below one row of running dimensions and left of the other is free
    scene.addAll(
        AxisTriad.of(
            design.axes(),
            made.view().right(),
            made.view().up(),
            views.left() + 6,
            views.bottom() - 0.8 * ShopPlan.FIGURES));
    scene.place(below, frame.left(), tablesTop);
    scene.addAll(heading.marks(new Box(frame.left(), titleTop, frame.right(), frame.bottom())));
    return new ShopSheet(
        paper,
        heading.title(),
        heading.altText(),
        scene.build(paper.width(), paper.height()),
        dxf(plan, sections, heading, figures, sizes(groups, made, figures)));
  }

  /** Supports whose sections look alike. */
  private record Group(
      char letter, List<Support> supports, List<MadeDimension> sizes, String note, boolean ofBall) {

    String names() {
      return String.join(", ", supports.stream().map(Support::name).toList());
    }

    String heading() {
      return "Section " + letter + ": " + names();
    }

    String sizesLine(ShopFigures figures) {
      List<String> parts = new ArrayList<>();
      if (!note.isEmpty()) {
        parts.add(note);
      }
      for (MadeDimension d : sizes) {
        parts.add(figures.sized(d));
      }
      return letter + " (" + names() + "): " + String.join("; ", parts);
    }
  }

  private static List<Group> groups(CouplingDesign design, MadeHalf made) {
    Map<List<Object>, List<Support>> alike = new LinkedHashMap<>();
    Map<List<Object>, List<MadeFeature>> features = new LinkedHashMap<>();
    for (Support s : design.supports()) {
      List<MadeFeature> own =
          made.features().stream()
              .filter(f -> f.name().equals(s.name()) && ofSupport(f.kind()))
              .toList();
      List<Object> key = new ArrayList<>();
      own.forEach(f -> key.addAll(List.of(f.kind(), f.note(), f.sizes())));
      alike.computeIfAbsent(key, k -> new ArrayList<>()).add(s);
      features.put(key, own);
    }
    List<Group> groups = new ArrayList<>();
    alike.forEach(
        (key, supports) -> {
          List<MadeDimension> sizes = new ArrayList<>();
          List<String> notes = new ArrayList<>();
          for (MadeFeature f : features.get(key)) {
            if (f.kind() != MadeFeature.Kind.BALL_REST) {
              sizes.addAll(f.sizes());
            }
            if (!f.note().isEmpty()) {
              notes.add(f.note());
            }
          }
          char letter = (char) ('A' + groups.size());
          groups.add(
              new Group(letter, supports, sizes, String.join(", ", notes), made.carriesBalls()));
        });
    return groups;
  }

  /** Sizes section by section, then those of the tool point. */
  private static List<String> sizes(List<Group> groups, MadeHalf made, ShopFigures figures) {
    List<String> lines = new ArrayList<>();
    groups.forEach(g -> lines.add(g.sizesLine(figures)));
    for (MadeFeature tool : made.ofKind(MadeFeature.Kind.TOOL_POINT)) {
      List<String> parts =
          tool.sizes().stream()
              .map(d -> d.part() + " " + figures.length(d.value(), d.tolerance()))
              .toList();
      lines.add("Tool point along the machine axes: " + String.join("; ", parts));
    }
    return lines;
  }

  private static boolean ofSupport(MadeFeature.Kind kind) {
    return kind != MadeFeature.Kind.LINE_OF_PULL && kind != MadeFeature.Kind.TOOL_POINT;
  }

  private static List<ShopView> sections(
      List<Group> groups, MadeHalf made, ShopFigures figures, Box area) {
    double height = area.height() / groups.size();
    List<ShopView> sections = new ArrayList<>();
    for (Group g : groups) {
      double top = area.top() + sections.size() * height;
      Box cell = new Box(area.left(), top, area.right(), top + height);
      Support shown = g.supports().get(0);
      sections.add(
          made.carriesBalls()
              ? ShopBallSection.of(g.heading(), shown, g.sizes(), figures, cell)
              : ShopSeatSection.of(g.heading(), shown, g.sizes(), figures, cell));
    }
    return sections;
  }

  /** Plan with the datum at the origin, sections beside it, words below, all in true size. */
  private static byte[] dxf(
      ShopPlan.Drawn plan,
      List<ShopView> sections,
      ShopTitle heading,
      ShopFigures figures,
      List<String> sizes) {
    DxfDrawing.Unit unit =
        figures.inchFirst() ? DxfDrawing.Unit.INCHES : DxfDrawing.Unit.MILLIMETRES;
    DxfDrawing drawing = new DxfDrawing(unit);
    List<String> words = new ArrayList<>(heading.lines());
    words.add("Lengths in " + unit.symbol() + ", true size; the datum is the origin");
    words.addAll(sizes);
    words.forEach(drawing::remark);
    plan.view().into(drawing, new Point(0, 0));
    double gap = DXF_GAP / plan.scale().ratio();
    double x = plan.view().reach(true) + gap;
    for (ShopView s : sections) {
      x += s.reach(false);
      s.into(drawing, new Point(x, 0));
      x += s.reach(true) + gap;
    }
    double letter = 0.0025 / plan.scale().ratio();
    double y = plan.view().lowest() - 4 * letter;
    List<String> wrapped = new ArrayList<>();
    words.forEach(w -> wrapped.addAll(TextWidth.wrapped(w, TextStyle.SMALL, LINE)));
    for (String line : wrapped) {
      Point at = new Point(-plan.view().reach(false), y);
      drawing.text(DxfLayer.NOTES, line, at, Anchor.START, letter, 0);
      y -= 1.8 * letter;
    }
    return drawing.bytes();
  }

  /**
   * Returns what is drawn, the size of the paper in sheet units of 1/96 inch.
   *
   * @return the scene
   */
  public Scene scene() {
    return scene;
  }

  /**
   * Returns the heading.
   *
   * @return plain text
   */
  public String title() {
    return title;
  }

  /**
   * Returns the drawing as a page that stands alone, the size of the paper stated in it.
   *
   * @return an SVG document in UTF-8
   */
  public byte[] svg() {
    return SvgWriter.page(scene, title, altText, paper.cssWidth(), paper.cssHeight())
        .getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Returns the drawing as a bitmap.
   *
   * @param scale pixels per sheet unit
   * @return the bytes of a PNG file
   */
  public byte[] png(double scale) {
    return ScenePainter.png(scene, scale);
  }

  /**
   * Returns plan and sections in true size.
   *
   * @return DXF of release 12, ASCII, in mm, or in inches if these come first
   */
  public byte[] dxf() {
    return dxf.clone();
  }
}
