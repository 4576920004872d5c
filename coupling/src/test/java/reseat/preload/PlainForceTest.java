package reseat.preload;

import java.util.stream.Stream;

class PlainForceTest extends PreloadContract {

  @Override
  Stream<PreloadDevice> cases() {
    return Stream.of(
        new PlainForce(600, ForceScatter.uniform(0.02, "read on a load cell")),
        new PlainForce(25, ForceScatter.NONE));
  }

  @Override
  String visitorMethod() {
    return "plainForce";
  }
}
