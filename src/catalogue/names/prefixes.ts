/**
 * Names that bear O, folded and without it, so that “Obrien” and “OBRIEN” can be told from names that merely begin with
 * the letter (Owens, Orr, Oates). Common practice, from memory; Matheson's Special Report (1894) counts with and without.
 */
const names =
  'boyle brien brian bryan byrne callaghan callahan carroll connell conner connor connors dea doherty donnell donoghue donohoe ' +
  'donohue donovan dowd driscoll dwyer farrell flaherty flanagan flynn gara gorman grady hagan halloran hanlon hara hare ' +
  'hea hehir herlihy higgins hogan hora houlihan kane keefe keeffe kelly leary looney loughlin lynn mahoney mahony malley ' +
  'mara meara meally mealley mullane neil neill nolan rahilly regan reilly riley riordan rorke rourke ruane ryan shannessy ' +
  'shaughnessy shea sullivan toole';

export const oStems: ReadonlySet<string> = new Set(names.split(' '));
