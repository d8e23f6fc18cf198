/** What is said of a thread that broke. A browser says nothing of one that it could not fetch. */
import { word } from '../words/words';

export const whyItBroke = ({ message }: ErrorEvent): string => message || word('workshopCar.notFetched');
