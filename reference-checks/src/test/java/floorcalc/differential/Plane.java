package floorcalc.differential;

import floorcalc.outline.Outline;
import java.util.List;

/** What a library of plane geometry is asked for. Everything in nanometres. */
interface Plane {
  /** {@return which library} */
  Library library();

  /** {@return the area in square nanometres} */
  double area(Outline outline);

  /** {@return the length of all walls in nanometres} */
  double perimeter(Outline outline);

  /** {@return the area that pieces cover together} */
  double areaOfUnion(List<Outline> pieces);

  /** {@return the area that is in one of the two alone} */
  double areaInOneAlone(List<Outline> some, List<Outline> others);
}
