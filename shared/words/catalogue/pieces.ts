const head = ['head', 'heads'] as const;
const lime = ['lime', 'limes'] as const;
const lemon = ['lemon', 'lemons'] as const;

/** What one piece of a food is called in the shop and the kitchen, singular and plural, by the food's id; "piece" where none stands here. */
export const pieceNames: Readonly<Record<string, readonly [string, string]>> = {
  garlic: head, lettuce: head, 'lettuce-iceberg': head, cauliflower: head, cabbage: head, 'red-cabbage': head, celery: head, broccoli: head,
  lime, 'lime-juice-fresh': lime, lemon, 'lemon-juice-fresh': lemon, 'lemon-whole': lemon, orange: ['orange', 'oranges'],
  egg: ['egg', 'eggs'], cucumber: ['cucumber', 'cucumbers'], aubergine: ['aubergine', 'aubergines'], mango: ['mango', 'mangoes'], pineapple: ['pineapple', 'pineapples'],
  papaya: ['papaya', 'papayas'], pomegranate: ['pomegranate', 'pomegranates'], 'coconut-fresh': ['coconut', 'coconuts'], melon: ['melon', 'melons'], watermelon: ['melon', 'melons'],
  lemongrass: ['stalk', 'stalks'], 'cinnamon-stick': ['stick', 'sticks'], 'bay-leaf': ['leaf', 'leaves'], 'cardamom-pod': ['pod', 'pods'], 'bread-rolls': ['roll', 'rolls'], 'flatbread-bought': ['flatbread', 'flatbreads'],
};

/** Foods whose own name says what a piece of them is ("6 limes", "3 cinnamon sticks"): beside the name the number alone is enough. */
export const pieceInName = (food: string): boolean => Object.hasOwn(pieceNames, food) && pieceNames[food] !== head && food !== 'lemongrass';
