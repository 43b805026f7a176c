/**
 * End joints: how they move from row to row, how far apart they fall in rows that touch, and the patterns to avoid.
 * <p>
 * A floor is held together across its end joints by the boards beside them, so joints of rows that touch are kept a
 * distance apart: the joint offset. Two sights give a floor away even where every offset is kept: the <em>H
 * pattern</em>, joints in line with a single row between them, and the <em>stair pattern</em>, joints that step on
 * evenly over three and more rows.
 * <p>
 * {@link JointPattern} says how a layer may set out joints on purpose: freely, or each row shifted by a fraction of a
 * board or by a fixed length. A fixed shift cannot avoid everything: half a board gives an H pattern in every second
 * row, a third of a board a stair. {@link JointLayout} looks at joints as they fall, however they were chosen, and names
 * what it finds. What to do about it is a compromise between the boards needed and the look of the floor, so the two
 * sights are notes, a broken offset rule is a warning.
 * <p>
 * {@link floorcalc.joints.JointSpread} says how evenly the joints of many rows are spread over a board's length.
 * <p>
 * Lengths are exact; nothing here rounds, but for a fraction of a board that is no whole nanometre. All types are
 * immutable and thread-safe and accept no null.
 * <pre>{@code
 * JointLayout joints = JointLayout.of(List.of(List.of(Length.parse("2200 mm")), List.of(Length.parse("2000 mm"))));
 * List<Finding> findings = joints.check("study", rules.get(LayingRules.MINIMUM_JOINT_OFFSET)).findings();
 * }</pre>
 */
package floorcalc.joints;
