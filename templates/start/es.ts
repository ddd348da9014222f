import type { StartCatalogue } from './catalogue.ts'

export const es = {
  'store-program-missing': ({ machine }) =>
    `Los paquetes instalados no traen PostgreSQL para este tipo de máquina (${machine}). Ponga en DATABASE_URL la dirección de un PostgreSQL propio.`,
  'store-links-missing': ({ command }) =>
    `Las bibliotecas de PostgreSQL no están enlazadas, porque los guiones de instalación estaban apagados. Ejecute: ${command}`,
  'store-user-missing': ({ user, said }) =>
    `PostgreSQL no funciona como root y no se pudo crear el usuario del sistema "${user}" (${said}). Cree ese usuario o inicie con otro usuario.`,
  'store-folder-closed': ({ folder, user }) =>
    `El usuario "${user}", que hace funcionar PostgreSQL, no puede pasar por la carpeta ${folder}. Permita el paso (chmod o+x ${folder}) o mueva el proyecto o DATA a otro lugar.`,
  'store-folder-refused': ({ folder, said }) => `La carpeta de datos ${folder} no se puede usar: ${said}`,
  'store-disk-full': ({ folder }) =>
    `El disco está lleno: no se puede escribir en ${folder}. Libere espacio e inicie de nuevo; no se perdió nada.`,
  'store-keys-missing': ({ file, folder }) =>
    `Los datos de ${folder} están, pero las contraseñas de ${file} faltan o no corresponden. Devuelva ese archivo desde donde vinieron los datos.`,
  'store-not-started': ({ log, said }) => `PostgreSQL no arrancó. El final de ${log}:\n${said}`,
  'store-in-use': ({ at }) =>
    `Otro servicio trabaja con estos datos (${at}). Deténgalo primero o inicie este con otra carpeta en DATA.`,
  'store-unreachable': ({ at, said }) => `PostgreSQL en ${at} no responde: ${said}`,
  'store-newer': ({ said }) =>
    `Los registros los escribió una versión más nueva de este programa. Instale esa versión. (${said})`,
  'queue-unreachable': ({ at, said }) => `Redis en ${at} no responde: ${said}`,
  'queue-forgets': ({ at, setting }) =>
    `Redis en ${at} no guarda un archivo de solo añadir y perdería pedidos al detenerse. Ponga "${setting}" en su configuración.`,
  'queue-evicts': ({ at, policy }) =>
    `Redis en ${at} desecha entradas cuando falta memoria (maxmemory-policy ${policy}). Ponga "maxmemory-policy noeviction".`,
} satisfies StartCatalogue
