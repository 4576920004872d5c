package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import reseat.elementary.Elementary;

/**
 * The places that must stay pressed: each contact, and round a ring of contact many.
 *
 * <p>The force at a place is a sum of contact forces with fixed weights, so it answers to loads as
 * contact forces do. A ring is looked at {@value #AROUND} times round: the least force is then told
 * too high by at most 4e-5 of its swing.
 */
public final class ContactPlaces {

  private static final int AROUND = 360;

  private record Place(String name, int contact, int firstOfRing, double azimuth) {}

  private final List<Place> places;

  private ContactPlaces(List<Place> places) {
    this.places = places;
  }

  /**
   * Lists the places.
   *
   * @param lines the contacts
   * @return one place per contact at a point, many for a ring
   */
  public static ContactPlaces of(ContactLines lines) {
    List<Place> places = new ArrayList<>();
    List<ContactLines.Line> all = lines.lines();
    for (int i = 0; i < all.size(); i++) {
      ContactLines.Line line = all.get(i);
      if (!line.ring()) {
        places.add(new Place(line.name(), i, -1, 0));
        continue;
      }
      for (int k = 0; k < AROUND; k++) {
        double azimuth = 2 * Math.PI * k / AROUND;
        int third = (int) Elementary.rint(3.0 * k / AROUND) % 3;
        places.add(new Place(line.support() + " (side of ring)", i + third, i, azimuth));
      }
      i += 2;
    }
    return new ContactPlaces(places);
  }

  /**
   * Returns how many places there are.
   *
   * @return places
   */
  public int size() {
    return places.size();
  }

  /**
   * Returns the name of a place.
   *
   * @param place index of the place
   * @return that of the contact, or of the support with the ring
   */
  public String name(int place) {
    return places.get(place).name;
  }

  /**
   * Returns the contact that a place belongs to.
   *
   * @param place index of the place
   * @return index of the contact; on a ring that of the nearest third
   */
  public int contact(int place) {
    return places.get(place).contact;
  }

  /**
   * Returns the force at a place.
   *
   * @param place index of the place
   * @param contactForces one value per contact: forces, or how they answer to something
   * @return the same for the place; on a ring told as a force on a third of it
   */
  public double force(int place, double[] contactForces) {
    Place p = places.get(place);
    if (p.firstOfRing < 0) {
      return contactForces[p.contact];
    }
    double sum = 0;
    for (int third = 0; third < 3; third++) {
      sum += RingLoad.weight(p.azimuth, third) * contactForces[p.firstOfRing + third];
    }
    return sum;
  }
}
