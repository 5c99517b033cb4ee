import { classroomWords as english } from './en/classroom.ts';
import { spoken } from './spoken.ts';

export const classroomWords = spoken('classroom', english);
