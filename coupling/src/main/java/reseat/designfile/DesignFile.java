package reseat.designfile;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.design.Acceptance;
import reseat.design.AssumedValue;
import reseat.design.CouplingDesign;
import reseat.design.DesignBuilder;
import reseat.design.Half;
import reseat.design.InputDoubt;
import reseat.design.MachineAxes;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.material.SurfaceState;
import reseat.space.Vec3;
import reseat.toml.TomlDocument;
import reseat.toml.TomlReader;
import reseat.units.QuantityKind;

/**
 * A design file that has been read: a design, or what stands in its way.
 *
 * @param design the design; empty if the file has errors
 * @param problems errors and warnings in the order of the file; each doubt that the file does not
 *     confirm is a warning
 * @param doubts values that look like slips, in the order of the file, those that it confirms among
 *     them; none if the file has errors
 * @param accepted what the file accepts, in its order
 * @param document what was read from the text
 * @param inInches whether more of its lengths are in inches, or parts of one, than in metric units
 */
public record DesignFile(
    Optional<CouplingDesign> design,
    List<DesignProblem> problems,
    List<InputDoubt> doubts,
    List<Acceptance> accepted,
    TomlDocument document,
    boolean inInches) {

  private static final Map<String, Half> HALVES = Map.of("holder", Half.HOLDER, "base", Half.BASE);

  /** Copies the lists. */
  public DesignFile {
    problems = List.copyOf(problems);
    doubts = List.copyOf(doubts);
    accepted = List.copyOf(accepted);
  }

  /** A file that cannot be used. */
  DesignFile(List<DesignProblem> problems) {
    this(Optional.empty(), problems, List.of(), List.of(), TomlReader.read(""), false);
  }

  /**
   * Lists the defaults that results rest on, made up only when it is asked for.
   *
   * @return what the file does not state; none if it has errors
   */
  public List<AssumedValue> assumed() {
    return design.isPresent() ? Assumptions.of(design.get(), document.root()) : List.of();
  }

  /**
   * Returns the doubts that the file does not confirm.
   *
   * @return in the order of the file
   */
  public List<InputDoubt> openDoubts() {
    return open(doubts, accepted);
  }

  static List<InputDoubt> open(List<InputDoubt> doubts, List<Acceptance> accepted) {
    List<InputDoubt> open = new ArrayList<>();
    for (InputDoubt doubt : doubts) {
      if (!doubt.confirmedBy(accepted)) {
        open.add(doubt);
      }
    }
    return open;
  }

  /** Makes warnings of the doubts that the file does not confirm. */
  static void warn(List<InputDoubt> doubts, List<Acceptance> accepted, Problems problems) {
    for (InputDoubt doubt : open(doubts, accepted)) {
      String message = doubt.message() + " If it is meant, write " + doubt.confirmation();
      problems.warning(doubt.line(), doubt.column(), doubt.key(), message);
    }
  }

  /**
   * Reads a design from a file.
   *
   * @param file the file, UTF-8 text
   * @return the design with its warnings, or every error that was found
   * @throws IOException if the file cannot be read
   */
  public static DesignFile read(Path file) throws IOException {
    Problems problems = new Problems();
    String text = SourceText.of(file, problems);
    return problems.hasErrors() ? new DesignFile(problems.sorted()) : read(text);
  }

  /**
   * Reads a design from the text of a file.
   *
   * @param text the whole text
   * @return the design with its warnings, or every error that was found
   */
  public static DesignFile read(String text) {
    return of(TomlReader.read(text), new Problems());
  }

  /**
   * Reads a design from a document.
   *
   * @param document what was read from the text of a file
   * @param problems takes the problems, and the keys if it keeps them
   * @return the design with its warnings, or every error that was found
   */
  static DesignFile of(TomlDocument document, Problems problems) {
    for (TomlDocument.SyntaxError e : document.errors()) {
      problems.error(e.line(), e.column(), "", e.message());
    }
    Section root = new Section(document.root(), "", problems);
    if (isBallMount(root)) {
      root.error(
          root.has("kind") ? "kind" : "stud",
          "this file describes one ball mount, not a whole coupling; 'reseat mount' reads it. A file"
              + " for this command has layout or support, see 'reseat starter tool-post'");
      return new DesignFile(problems.sorted());
    }
    List<Acceptance> accepted = AcceptanceReader.read(root);
    Optional<CouplingDesign> design = read(root, problems, document.errors().isEmpty());
    if (design.isEmpty() || problems.hasErrors()) {
      return new DesignFile(problems.sorted());
    }
    AcceptedPlaces.of(design.get()).check(accepted, problems.written().keySet(), problems);
    if (problems.hasErrors()) {
      return new DesignFile(problems.sorted());
    }
    List<InputDoubt> doubts = Plausibility.of(design.get(), problems.written());
    warn(doubts, accepted, problems);
    return new DesignFile(
        design,
        problems.sorted(),
        doubts,
        accepted,
        document,
        PrevailingUnits.inch(problems.written()));
  }

  /** Whether the file is of the other kind, which says so or has its stud at the top. */
  private static boolean isBallMount(Section root) {
    if (root.has("layout") || root.has("support")) {
      return false;
    }
    return root.has("kind") || root.has("stud");
  }

  /**
   * Reads nothing but the preloads of a document that has been read before.
   *
   * @param document the document
   * @param problems takes the problems
   * @return the preloads; fewer than in the file if some are wrong
   */
  static List<Preload> preloads(TomlDocument document, Problems problems) {
    Section root = new Section(document.root(), "", problems);
    MaterialReader materials = new MaterialReader();
    materials.read(root.children("material"));
    return LoadReader.preloads(root.children("preload"), materials);
  }

  private static Optional<CouplingDesign> read(Section root, Problems problems, boolean whole) {
    DesignBuilder b = CouplingDesign.builder();
    b.title(root.text("title", ""));
    Half ballsOn = root.choice("balls_on", HALVES).orElse(Half.HOLDER);
    b.ballsOn(ballsOn);
    MachineAxes axes = MachineAxes.ofCoupling();
    Optional<Section> machine = root.child("machine");
    if (machine.isPresent()) {
      axes = MachineReader.axes(machine.get());
      b.turning(MachineReader.turning(machine.get(), axes));
      b.gravity(machine.get().direction("gravity").orElse(Vec3.Z.negated()));
      machine.get().close();
    }
    b.axes(axes);
    MaterialReader materials = new MaterialReader();
    materials.read(root.children("material"));
    List<Support> supports = supports(root, new SupportReader(materials, ballsOn), whole);
    b.supports(supports);
    Vec3 toolPoint = Vec3.ZERO;
    Optional<Section> tool =
        root.requiredChild("tool_point", "[tool_point] with at = [\"x\", \"y\", \"z\"]");
    if (tool.isPresent()) {
      if (!tool.get().has("at")) {
        tool.get().error("at", "is missing; write [\"x\", \"y\", \"z\"]");
      }
      toolPoint = tool.get().vector("at", QuantityKind.LENGTH).orElse(Vec3.ZERO);
      tool.get().close();
    }
    b.toolPoint(toolPoint);
    b.preloads(LoadReader.preloads(root.children("preload"), materials));
    Optional<Section> holder =
        root.requiredChild("holder", "[holder] with mass and centre_of_mass");
    if (holder.isPresent()) {
      b.holder(LoadReader.holder(holder.get()));
    }
    b.cases(LoadReader.cases(root.children("load_case"), toolPoint, axes));
    wishes(root, b, supports, axes);
    b.shop(ShopReader.read(root));
    root.close();
    if (problems.hasErrors()) {
      return Optional.empty();
    }
    try {
      return Optional.of(b.build());
    } catch (IllegalArgumentException e) {
      return root.refused(e);
    }
  }

  private static void wishes(
      Section root, DesignBuilder b, List<Support> supports, MachineAxes axes) {
    Optional<Section> friction = root.child("friction");
    b.friction(
        friction.isPresent()
            ? WishReader.friction(friction.get(), supports)
            : WishReader.ofCatalog(supports, SurfaceState.OILED));
    Optional<Section> targets = root.child("targets");
    if (targets.isPresent()) {
      b.targets(WishReader.targets(targets.get(), axes));
    }
    Optional<Section> remount = root.child("remount");
    if (remount.isPresent()) {
      b.remount(WishReader.remount(remount.get()));
    }
    Optional<Section> tolerances = root.child("tolerances");
    // what a tolerance may be of is not known until there is a support
    if (tolerances.isPresent() && !supports.isEmpty()) {
      b.tolerances(ToleranceReader.read(tolerances.get(), supports, axes));
    }
    Optional<Section> size = root.child("size");
    if (size.isPresent()) {
      // Read for its problems only; the search reads it again.
      SizeReader.read(size.get());
    }
  }

  private static List<Support> supports(Section root, SupportReader reader, boolean whole) {
    List<Support> supports = new ArrayList<>();
    boolean layout = root.has("layout");
    boolean each = root.has("support");
    if (layout && each) {
      root.error("support", "layout and support are both given; leave one out");
    } else if (layout) {
      Optional<Section> shorthand = root.child("layout");
      if (shorthand.isPresent()) {
        supports.addAll(reader.layout(shorthand.get()));
      }
    } else if (each) {
      supports.addAll(reader.each(root.children("support")));
    } else if (whole) {
      root.error(
          "layout", "is missing; write [layout] for a usual layout, or [[support]] for each ball");
    }
    return supports;
  }
}
