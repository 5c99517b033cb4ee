import type { Catalogue } from '../catalogue.ts';

export const copperWords: Catalogue['copper'] = {
  troubles: {
    'burnt-out':
      'Ein Teil des Blatts ist weiß ausgebrannt, Band und Papier sehen dort gleich aus. Die Lampe zur Seite rücken oder knapper belichten und neu aufnehmen.',
    'too-dark':
      'Ein Teil des Blatts liegt so tief im Schatten, dass sich Band und Papier nicht trennen lassen. Mehr Licht geben und neu aufnehmen.',
    'odd-shapes':
      'Was hier wie Kupfer aussieht, hat nicht die Form von Leiterbahnen: Farbe, ein Schatten oder das Licht können im Weg sein. An zwei oder drei Stellen auf das Band tippen, um zu zeigen, wie es aussieht.',
    doubtful:
      'Vieles, was hier Band sein kann, lässt sich nicht sicher von Papier trennen. An zwei oder drei Stellen auf das Band tippen oder bei gleichmäßigem Licht neu aufnehmen.',
    disagree:
      'Zwei Arten, das Kupfer zu sehen, sind bei diesem Foto uneins. Die Maske durchsehen, mit dem Pinsel berichtigen oder bei gleichmäßigem Licht neu aufnehmen.',
    'no-copper':
      'Auf diesem Blatt wurde kein Kupferband gefunden. Ist welches da, an zwei oder drei Stellen darauf tippen oder bei gleichmäßigem Licht neu aufnehmen.',
    'no-nets':
      'Die trainierten Netze ließen sich nicht laden; das Kupfer wurde nur nach Farbe und Form erkannt, und es kann mehr als falsch gelten, als es ist. Seite mit Netzverbindung neu laden oder prüfen, ob die Modelle vollständig sind, dann noch einmal prüfen.',
  },
  shotLeftOut: {
    outline: 'ihr Blatt war nicht sicher zu erkennen',
    misfit: 'sie passt nicht über die erste',
  },
  noShots: 'Es gibt kein Foto dieses Blatts zu lesen.',
  shotsDiffer:
    'Die Aufnahmen sind nicht auf eine Größe entzerrt. Für alle dieselbe Größe des Grundblatts und denselben Rand angeben.',
  secondShot:
    'Lampe oder Blatt etwas neigen und noch einmal aufnehmen: Glanz wandert, eine echte Unterbrechung bleibt.',
};
