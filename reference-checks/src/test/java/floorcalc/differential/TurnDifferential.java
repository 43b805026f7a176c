package floorcalc.differential;

import floorcalc.differential.RandomOutlines.Place;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.outline.Wkt;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.PolarCoordinates;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** The longest wall, its direction, and the room turned so that it runs along x. */
final class TurnDifferential extends Comparison {
  TurnDifferential(int cases) {
    super("the longest wall, its direction, and the room turned along it", Library.COMMONS_GEOMETRY, cases,
        Direction.class, Ring.class);
  }

  @Override
  public String unit() {
    return "nm at any corner";
  }

  @Override
  public double tolerance() {
    return 1.1;
  }

  @Override
  public String argument() {
    return "a direction is held to a billionth of a degree, which is 0.35 nm at 40 m; corners are rounded by half a nanometre along x and y";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    RandomOutlines outlines = new RandomOutlines(281);
    for (int k = 0; k < upTo; k++) {
      Outline room = outlines.next(Place.NEAR);
      Ring shell = room.shell();
      int wall = shell.longestWall();
      Point from = shell.corners().get(wall);
      Point to = shell.corners().get((wall + 1) % shell.size());
      Direction along = Direction.fromPoints(from, to);
      Ring turned = (answers == Answers.AS_GIVEN ? along : Direction.fromDegrees(along.degrees() + 1e-6)).toFrame(shell);
      worst.nextCase();
      double longest = 0;
      for (int i = 0; i < shell.size(); i++) {
        longest = Math.max(longest, vector(shell, i).distance(vector(shell, (i + 1) % shell.size())));
      }
      worst.see(longest - vector(shell, wall).distance(vector(shell, (wall + 1) % shell.size())), () -> "longest of " + shell);
      double azimuth = PolarCoordinates.fromCartesian(vector(shell, wall).vectorTo(vector(shell, (wall + 1) % shell.size()))).getAzimuth();
      AffineTransformMatrix2D back = AffineTransformMatrix2D.createRotation(-azimuth);
      for (int i = 0; i < shell.size(); i++) {
        worst.see(back.apply(vector(shell, i)).distance(vector(turned, i)), () -> along + " of " + Wkt.write(room));
      }
    }
  }

  private static Vector2D vector(Ring ring, int i) {
    return Vector2D.of(ring.x(i), ring.y(i));
  }
}
