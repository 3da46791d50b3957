/**
 * The controls every place is built of.
 *
 * <ul>
 *   <li>{@link org.rafterbook.ui.kit.Lay} and {@link org.rafterbook.ui.kit.Words}: rows, columns, gaps; texts by role
 *   <li>{@link org.rafterbook.ui.kit.Sheet}: paper with captioned sections; {@link
 *       org.rafterbook.ui.kit.FoldingColumn} folds parts where the height does not suffice, {@link org.rafterbook.ui.kit.FittingFrame} tells
 *       how much room there is
 *   <li>{@link org.rafterbook.ui.kit.Buttons}, {@link org.rafterbook.ui.kit.SettingRow}, {@link
 *       org.rafterbook.ui.kit.KeyCap}: things with a key
 *   <li>{@link org.rafterbook.ui.kit.Field}, {@link org.rafterbook.ui.kit.ChoiceField}, {@link
 *       org.rafterbook.ui.kit.Segments}: what is typed or chosen
 *   <li>{@link org.rafterbook.ui.kit.FormSheet}: a form beside what it is about; {@link org.rafterbook.ui.kit.Amount} is
 *       filled with what stands and gives back exactly that until somebody types, {@link
 *       org.rafterbook.ui.kit.SettingWords} words and reads settings
 *   <li>{@link org.rafterbook.ui.kit.Table}: the one table
 *   <li>{@link org.rafterbook.ui.kit.EmptyBox}, {@link org.rafterbook.ui.kit.ToDo}, {@link
 *       org.rafterbook.ui.kit.CautionBox}, {@link org.rafterbook.ui.kit.Notice}: what is missing, dangerous or done
 *   <li>{@link org.rafterbook.ui.kit.ProgressRule}, {@link org.rafterbook.ui.kit.WatchFace}, {@link
 *       org.rafterbook.ui.kit.Figure}, {@link org.rafterbook.ui.kit.EffectWordView}: what is read
 * </ul>
 */
@NullMarked
package org.rafterbook.ui.kit;

import org.jspecify.annotations.NullMarked;
